BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'New-LayerGroup' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'makes an empty group in front' {
        $out = $file | New-LayerGroup Notes
        $out.LayerCount | Should -Be 9
        ($file | Get-Layer -LayerNumber 1).LayerPath | Should -Be 'Notes'
    }

    It 'makes a group around layers chosen by name or path' {
        $file | New-LayerGroup -Name Trunk -Around 'Body' > $null
        ($file | Get-Layer -Name Body).LayerPath | Should -Be 'Figure/Trunk/Body'
        $file | New-LayerGroup -Name Face -Around 'Figure/Head/*' > $null
        ($file | Get-Layer -LayerPath 'Figure/Head/Face/*' -Leaf).Name | Should -Be 'Eye L', 'Head'
    }

    It 'makes a group around layers from the pipeline, and passes them on' {
        $out = $file | Get-Layer -Name Body | New-LayerGroup Trunk
        $out.LayerPath | Should -Be 'Figure/Trunk/Body'
    }

    It 'is written by a save' {
        $file | New-LayerGroup Trunk -Around Body | Save-LayerFile -InPlace > $null
        (Get-Layer $file.Path -Name Body).LayerPath | Should -Be 'Figure/Trunk/Body'
    }

    It 'refuses names that are taken or empty, and a choice that fits nothing' {
        (Get-Streams { $file | New-LayerGroup Figure }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'EditRefused,*'
        ($file | New-LayerGroup Figure -AllowDuplicate).LayerCount | Should -Be 9
        (Get-Streams { $file | New-LayerGroup Trunk -Around 'Nobody*' }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerNotFound,*'
    }

    It 'changes nothing with -WhatIf' {
        ($file | New-LayerGroup Trunk -Around Body -WhatIf).LayerCount | Should -Be 8
    }
}
