BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Measure-LayerBudget' {
    BeforeEach {
        $folder = New-Item -ItemType Directory -Path (Join-Path $TestDrive ([guid]::NewGuid()))
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
    }

    It 'tells pages and memory with the page size of the profile' {
        $budget = $file | Measure-LayerBudget
        "$($budget.PageSize) $($budget.Padding) $($budget.Parts) $($budget.Pages) $($budget.MemoryMB)" | Should -Be '4096 4 4 1 64'
        $budget.MipmapMemoryMB | Should -Be ((4 * 4096 * 4096 - 1) / 3 * 4 / 1MB)
    }

    It 'gives the same for a file and for its layers' {
        ($file | Get-Layer | Measure-LayerBudget -PageSize 1024 | ConvertTo-Json) | Should -Be ($file | Measure-LayerBudget -PageSize 1024 | ConvertTo-Json)
    }

    It 'lists the parts that cost most, and pages' {
        $parts = $file | Measure-LayerBudget -Top 2
        $parts.Count | Should -Be 2
        $parts[0].MemoryMB | Should -BeGreaterOrEqual $parts[1].MemoryMB
        ($file | Measure-LayerBudget -By Page).Parts | Should -Be 4
        $file | Measure-LayerBudget -Name 'Arm L' -By Part | ForEach-Object LayerPath | Should -BeLike 'Figure/Arm L*'
    }

    It 'writes a picture of each page, once' {
        $picture = $file | Measure-LayerBudget -PageSize 1024 -Picture $folder
        $picture.FullName | Should -Be (Join-Path $folder 'hero.png')
        (Get-Streams { $file | Measure-LayerBudget -Picture $picture.FullName }).Errors[0].Exception.Message | Should -BeLike '*-Force*'
        $file | Measure-LayerBudget -Picture $picture.FullName -Force | Should -Not -BeNullOrEmpty
        $file | Measure-LayerBudget -Picture (Join-Path $folder 'other.png') -WhatIf
        Join-Path $folder 'other.png' | Should -Not -Exist
        (Get-Streams { $file | Measure-LayerBudget -Picture (Join-Path $folder 'a.jpg') }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotAPicture*'
    }

    It 'is shown in a table that fits' {
        $text = $file | Measure-LayerBudget | Out-String -Width 120
        $text | Should -Match 'hero\.psd\s+4096\s+4\s+1\s+\S+ %\s+64\.0\s+85\.3'
    }
}
