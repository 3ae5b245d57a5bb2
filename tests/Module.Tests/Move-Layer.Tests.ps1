BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Move-Layer' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'moves before, after and into a layer' {
        $file | Move-Layer -Name Body -Before 'Figure/Head' > $null
        ($file | Get-Layer).LayerPath[3, 4] | Should -Be 'Figure/Body', 'Figure/Head'
        $file | Move-Layer -Name Body -After 'figure/head' > $null
        ($file | Get-Layer)[-1].LayerPath | Should -Be 'Figure/Body'
        $file | Move-Layer -Name Body -Into 'Figure/Arm L' > $null
        ($file | Get-Layer -Name Body).LayerPath | Should -Be 'Figure/Arm L/Body'
    }

    It 'finds its target by number, by a name that only one layer has, and takes a layer' {
        $file | Move-Layer -Name Body -Before 1 > $null
        ($file | Get-Layer -Name Body).LayerNumber | Should -Be 1
        $file | Move-Layer -Name Body -Into Figure > $null
        ($file | Get-Layer -Name Body).LayerPath | Should -Be 'Figure/Body'
        $file | Get-Layer -Name Body | Move-Layer -After ($file | Get-Layer -LiteralLayerPath 'Figure/Head') > $null
        ($file | Get-Layer)[-1].Name | Should -Be 'Body'
    }

    It 'refuses a target that could be several layers, naming each' {
        $result = Get-Streams { $file | Move-Layer -Name Body -Before 'Eye L' }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerAmbiguous,*'
        $result.Errors[0] | Should -BeLike '*5 (Figure/Head/Eye L), 6 (Figure/Head/Eye L/Eye L)*'
    }

    It 'refuses a group that would go into itself, and does not pass the file on' {
        $result = Get-Streams { $file | Move-Layer -LiteralLayerPath 'Figure' -Into 'Figure/Head' }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'EditRefused,*'
        $file.PendingCount | Should -Be 0
    }

    It 'needs a choice of layers and an existing target' {
        (Get-Streams { $file | Move-Layer -Into 1 }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'SelectionMissing,*'
        (Get-Streams { $file | Move-Layer -Name Body -Into Nowhere }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerNotFound,*'
        (Get-Streams { $file | Move-Layer -Name Body -Into 99 }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerNotFound,*'
    }

    It 'changes nothing with -WhatIf' {
        $file | Move-Layer -Name Body -Before 1 -WhatIf > $null
        $file.PendingCount | Should -Be 0
    }
}
